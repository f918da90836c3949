using System.Threading.Channels;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.Hall;

/// <summary>The one worker through which all looking into the register and all writing goes, in the order asked for; answers come back where the screen is drawn.</summary>
internal sealed class StoreQueue : IAsyncDisposable
{
    private const int BetweenTellings = 100;

    private readonly Channel<Action> _work = Channel.CreateUnbounded<Action>(new UnboundedChannelOptions { SingleReader = true });
    private readonly Register _register;
    private readonly Action<Action> _onScreen;
    private readonly CancellationTokenSource _closing = new();
    private readonly Task _worker;

    /// <param name="register">The open register.</param>
    /// <param name="onScreen">Runs what is given it where pages may be changed: on the thread that draws them.</param>
    public StoreQueue(Register register, Action<Action> onScreen)
    {
        _register = register;
        _onScreen = onScreen;
        _worker = Task.Run(WorkAsync);
    }

    /// <summary>Does something with the register, and answers on the drawing thread.</summary>
    /// <exception cref="Domain.RefusedException">The register said no.</exception>
    public Task<T> Do<T>(Func<Register, T> work)
    {
        // Without RunContinuationsAsynchronously what follows an await runs inside onScreen, and so on the drawing thread.
        TaskCompletionSource<T> answer = new();

        if (!_work.Writer.TryWrite(() => Answer(work, answer)))
        {
            answer.SetCanceled();
        }

        return answer.Task;
    }

    public Task Do(Action<Register> work) => Do(register =>
    {
        work(register);
        return true;
    });

    /// <summary>
    /// Looks long, without keeping anyone waiting: beside the queue, at a snapshot of its own, so it must change nothing. Answers on the
    /// drawing thread. It is given a way to tell there how far it has come, passed on ten times a second at most, and is to stop when the
    /// token says that the register is closed.
    /// </summary>
    /// <exception cref="Domain.RefusedException">The register said no.</exception>
    /// <exception cref="OperationCanceledException">The register was closed meanwhile.</exception>
    public Task<T> Aside<T>(Func<Register, Action<Action>, CancellationToken, T> look)
    {
        TaskCompletionSource<T> answer = new();
        var closing = _closing.Token;
        _ = Task.Run(() => Answer(register => look(register, Teller(closing), closing), answer), CancellationToken.None);

        return answer.Task;
    }

    /// <summary>When everything asked for so far is done.</summary>
    public Task Idle() => Do(_ => { });

    /// <summary>Takes nothing more on and waits for what is under way: a deed is never cut off half way.</summary>
    public async ValueTask DisposeAsync()
    {
        _work.Writer.TryComplete();
        await _closing.CancelAsync();
        await _worker.ConfigureAwait(false);
    }

    private Action<Action> Teller(CancellationToken closing)
    {
        var told = Environment.TickCount64;

        return show =>
        {
            closing.ThrowIfCancellationRequested();

            if (Environment.TickCount64 - told >= BetweenTellings)
            {
                told = Environment.TickCount64;
                _onScreen(show);
            }
        };
    }

    private void Answer<T>(Func<Register, T> work, TaskCompletionSource<T> answer)
    {
        try
        {
            var result = work(_register);
            _onScreen(() => answer.SetResult(result));
        }
        catch (Exception failure)
        {
            // Whatever it was is met by the one who asked.
            _onScreen(() => answer.SetException(failure));
        }
    }

    private async Task WorkAsync()
    {
        await foreach (var work in _work.Reader.ReadAllAsync().ConfigureAwait(false))
        {
            work();
        }
    }
}
