using System.Collections.Concurrent;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace TieRodCalc.Browser;

/// <summary>What the browser reported by itself.</summary>
/// <param name="Method">What happened.</param>
/// <param name="Facts">The facts of it.</param>
internal sealed record BrowserEvent(string Method, JsonElement Facts);

/// <summary>A conversation with the browser or with one of its pages: commands with their answers, and events in between.</summary>
internal sealed class DevTools : IAsyncDisposable
{
    private static readonly TimeSpan AnswersWithin = TimeSpan.FromSeconds(60);
    private readonly ClientWebSocket _socket = new();
    private readonly ConcurrentDictionary<int, TaskCompletionSource<JsonElement>> _waiting = new();
    private readonly ConcurrentQueue<BrowserEvent> _events = new();
    private readonly SemaphoreSlim _oneAtATime = new(1);
    private readonly CancellationTokenSource _end = new();
    private Task _listening = Task.CompletedTask;
    private int _last;

    private DevTools(Uri address) => Address = address;

    /// <summary>Whom it is talked to.</summary>
    public Uri Address { get; }

    /// <summary>All events so far, oldest first.</summary>
    public IEnumerable<BrowserEvent> Events => _events;

    public static async Task<DevTools> ConnectAsync(Uri address)
    {
        DevTools tools = new(address);
        await tools._socket.ConnectAsync(address, CancellationToken.None);
        tools._listening = tools.ListenAsync();
        return tools;
    }

    /// <summary>Gives a command and waits for its answer.</summary>
    /// <param name="method">The command.</param>
    /// <param name="arguments">Its arguments, or null.</param>
    /// <exception cref="BrowserException">The browser refuses or does not answer.</exception>
    public async Task<JsonElement> SendAsync(string method, JsonObject? arguments = null)
    {
        int id = Interlocked.Increment(ref _last);
        JsonObject message = new() { ["id"] = id, ["method"] = method, ["params"] = arguments ?? [] };
        TaskCompletionSource<JsonElement> answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
        _waiting[id] = answer;
        await _oneAtATime.WaitAsync();
        try
        {
            await _socket.SendAsync(
                JsonSerializer.SerializeToUtf8Bytes(message), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);
        }
        finally
        {
            _oneAtATime.Release();
        }

        try
        {
            JsonElement received = await answer.Task.WaitAsync(AnswersWithin);
            return received.TryGetProperty("error", out JsonElement error)
                ? throw new BrowserException($"{method}: {error}")
                : received.GetProperty("result");
        }
        catch (TimeoutException)
        {
            throw new BrowserException($"{method}: no answer");
        }
    }

    private async Task ListenAsync()
    {
        try
        {
            while (await ReceiveAsync() is { } message)
            {
                Take(message);
            }
        }
        catch (Exception e) when (e is WebSocketException or OperationCanceledException)
        {
            // The browser is gone, or we go.
        }

        foreach (TaskCompletionSource<JsonElement> waiting in _waiting.Values)
        {
            waiting.TrySetException(new BrowserException("the browser has gone away"));
        }
    }

    private async Task<JsonElement?> ReceiveAsync()
    {
        using MemoryStream message = new();
        byte[] part = new byte[1 << 16];
        WebSocketReceiveResult received;
        do
        {
            received = await _socket.ReceiveAsync(part, _end.Token);
            message.Write(part, 0, received.Count);
        }
        while (!received.EndOfMessage);

        return received.MessageType == WebSocketMessageType.Close
            ? null
            : JsonDocument.Parse(message.ToArray()).RootElement;
    }

    private void Take(JsonElement message)
    {
        if (message.TryGetProperty("id", out JsonElement id))
        {
            if (_waiting.TryRemove(id.GetInt32(), out TaskCompletionSource<JsonElement>? answer))
            {
                answer.TrySetResult(message);
            }

            return;
        }

        _events.Enqueue(new BrowserEvent(message.GetProperty("method").GetString()!, message.GetProperty("params")));
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        await _listening;
        _socket.Dispose();
        _end.Dispose();
        _oneAtATime.Dispose();
    }
}
